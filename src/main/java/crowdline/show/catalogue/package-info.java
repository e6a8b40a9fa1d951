/** The figures that are known by name, with the elements they are usually flown with. */
@NullMarked
package crowdline.show.catalogue;

import org.jspecify.annotations.NullMarked;
