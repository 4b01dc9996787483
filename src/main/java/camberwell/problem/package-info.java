/** What is wrong in a file that a person wrote, and where. */
package camberwell.problem;
