/** The book of runs: what was driven, what came of each change, and what to try next. */
package camberwell.history;
