/** What spreadsheets hand over becomes edits of a show, and what they take is made of it. */
@NullMarked
package crowdline.exchange;

import org.jspecify.annotations.NullMarked;
