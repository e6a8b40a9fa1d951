/** What the drill asks of the figures and when it asks again; without screens, clocks and files. */
@NullMarked
package crowdline.glossary.drill;

import org.jspecify.annotations.NullMarked;
