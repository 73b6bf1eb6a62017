/** Style sheets are bundled; importing one brings no value. */
declare module '*.css';
