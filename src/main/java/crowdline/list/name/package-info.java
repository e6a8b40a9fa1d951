/**
 * Names of figures, however they are spelt.
 */
@NullMarked
package crowdline.list.name;

import org.jspecify.annotations.NullMarked;
