/**
 * Words as they are written in a list, and the tables of those that mean something.
 */
@NullMarked
package crowdline.list.word;

import org.jspecify.annotations.NullMarked;
