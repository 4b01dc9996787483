/** A car as far as its setup goes: what can be changed on it and by how much, its tyres, its dimensions. */
package camberwell.car;
