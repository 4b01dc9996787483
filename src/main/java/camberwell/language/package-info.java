/**
 * The sentences that rules are written in: the dictionary, rule files as they are read, and what a condition asks and a
 * conclusion says.
 */
package camberwell.language;
