/**
 * The driver's own words: what somebody said becomes complaints in words of the vocabulary, and what was not understood
 * is named. The phrases are data; see {@code knowledge-notes/sayings.yaml}.
 */
package camberwell.saying;
