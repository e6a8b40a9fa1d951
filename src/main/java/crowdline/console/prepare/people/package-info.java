/** Who flies, and how names and words are said. */
@NullMarked
package crowdline.console.prepare.people;

import org.jspecify.annotations.NullMarked;
