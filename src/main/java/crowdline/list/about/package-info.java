/** What a letter says of the act beside its figures, read from what was left over of it. */
@NullMarked
package crowdline.list.about;

import org.jspecify.annotations.NullMarked;
