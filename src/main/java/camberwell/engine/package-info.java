/**
 * Rules that fire: compiled to Drools' executable model, kept compiled, loaded and put before a case. The only package
 * that imports Drools.
 */
package camberwell.engine;
