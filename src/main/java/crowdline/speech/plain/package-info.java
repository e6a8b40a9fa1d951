/** Whether listeners can follow a remark, and how it breaks into breaths. Hints only: nothing here changes a text. */
@NullMarked
package crowdline.speech.plain;

import org.jspecify.annotations.NullMarked;
