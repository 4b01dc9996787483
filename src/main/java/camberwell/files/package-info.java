/** Files that appear whole or not at all, also when the process that writes them is killed, and by what they are known again. */
package camberwell.files;
