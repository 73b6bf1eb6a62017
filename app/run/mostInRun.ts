/** Athletes of one run. Every case of a run is held open, and nobody screens more in a day. Chosen for the house; no source. */
export const MOST_IN_RUN = 500;
