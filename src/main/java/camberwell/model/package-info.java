/**
 * A car's file as a car of the handling model, and what the model says of a change to it. Uses the car, the run, the
 * physics, the vocabulary and the units, and nothing of the rules.
 */
package camberwell.model;
