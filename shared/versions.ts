/** Printed on every report and stored with it, so that last year's pages can be explained. */
export const APP_VERSION = '0.1.0';
export const KERNEL_VERSION = '0.4.0';
export const RULES_VERSION = '0.4.0';
