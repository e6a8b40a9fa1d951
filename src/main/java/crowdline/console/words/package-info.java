/** The Words place: writing the remarks of a show. Models know no Swing; views hold no rules. */
@NullMarked
package crowdline.console.words;

import org.jspecify.annotations.NullMarked;
