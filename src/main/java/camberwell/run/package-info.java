/** One run on track: the day, the tyres as they were measured, and what the driver reports. */
package camberwell.run;
