/**
 * The knowledge notes: for every adjuster, reading, cause, driving habit and caution a page with the rationale, the
 * effects, the sources and the prose. Depends on the vocabulary alone.
 */
package camberwell.knowledge;
