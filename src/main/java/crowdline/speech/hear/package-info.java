/** Where speech begins and ends in sound. Sound comes as samples and leaves as levels; nothing here keeps it. */
@NullMarked
package crowdline.speech.hear;

import org.jspecify.annotations.NullMarked;
