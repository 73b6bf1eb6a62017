// A door to the odex package for the type checker: its own sources do not compile under our options.
export { Solver } from 'odex';
