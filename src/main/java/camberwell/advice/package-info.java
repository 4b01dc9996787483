/** From conclusions to advice: ranking, sizing, trade-offs, conflicts, and the reasons for all of them. */
package camberwell.advice;
