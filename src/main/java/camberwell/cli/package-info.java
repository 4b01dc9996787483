/** The command line: what is typed, what is printed, and the exit code. Nothing below it prints. */
package camberwell.cli;
