/**
 * Files as bytes and lines: saves that never harm what was there, files that only grow, files nobody else may read, and
 * where in a text something stands.
 */
@NullMarked
package crowdline.storage.file;

import org.jspecify.annotations.NullMarked;
