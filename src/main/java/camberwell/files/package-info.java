/** Files that appear whole or not at all, also when the process that writes them is killed. */
package camberwell.files;
