/** The figures of an act: their table, what can be told of the chosen one, its path, its curves and its shape. */
@NullMarked
package crowdline.console.prepare.figure;

import org.jspecify.annotations.NullMarked;
