/** Edits of what a show is besides its acts: the day and the place, its air, aircraft, people and announcements. */
@NullMarked
package crowdline.edit.day;

import org.jspecify.annotations.NullMarked;
