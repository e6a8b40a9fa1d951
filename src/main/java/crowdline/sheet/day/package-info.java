/** A day as a whole: as a chart, in words, as comma-separated values, and beside another day. */
@NullMarked
package crowdline.sheet.day;

import org.jspecify.annotations.NullMarked;
