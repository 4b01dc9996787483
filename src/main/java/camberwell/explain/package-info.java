/** How advice came about, why a change is not in it, what would make it another: read off facts, rules and notes. */
package camberwell.explain;
