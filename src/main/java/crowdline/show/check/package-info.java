/**
 * Whether a show is sound: rules, and what they find. A finding says what, which value, what is allowed and where.
 */
@NullMarked
package crowdline.show.check;

import org.jspecify.annotations.NullMarked;
