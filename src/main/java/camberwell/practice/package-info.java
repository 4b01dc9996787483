/**
 * A car that one knows to be good, something wrong put into it, and a driver who tells what it then does: to practise
 * on, and to judge advice by whether the car gets better. Uses the model, and nothing of the rules.
 */
package camberwell.practice;
