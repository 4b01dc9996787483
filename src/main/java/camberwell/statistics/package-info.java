/** Small-sample statistics of lap times and grades: pure functions on numbers, with Hipparchus' distributions. */
package camberwell.statistics;
