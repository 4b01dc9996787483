/**
 * Files that a person wrote in YAML, read key by key; what is wrong is noted with its line and column. Results are written in it,
 * too.
 */
package camberwell.yaml;
