/**
 * The debrief: questions after a run, each chosen because its answer is expected to tell the ranking most. Pure: what
 * is typed and printed is the command line's.
 */
package camberwell.debrief;
