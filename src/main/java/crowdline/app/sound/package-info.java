/** The microphone, and the thread that listens to it. */
@NullMarked
package crowdline.app.sound;

import org.jspecify.annotations.NullMarked;
