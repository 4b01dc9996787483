/**
 * The page that driver and coach take home: one HTML file that needs nothing else. Texts, numbers and their order come
 * from the same records as those of every other output; the drawings are SVG in the page.
 */
package camberwell.sheet;
