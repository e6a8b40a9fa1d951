/**
 * A show with everything that is computed from it: its predictions, its learned times, its plans, what was found in it,
 * and what flight logs say about it. No screen and no thread of its own.
 */
@NullMarked
package crowdline.loaded;

import org.jspecify.annotations.NullMarked;
