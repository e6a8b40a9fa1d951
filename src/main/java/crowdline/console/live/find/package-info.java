/**
 * What is found in two keystrokes beside the words.
 */
@NullMarked
package crowdline.console.live.find;

import org.jspecify.annotations.NullMarked;
