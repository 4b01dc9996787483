/** A setup advisor for racing drivers and the people who coach them. */
package camberwell;
