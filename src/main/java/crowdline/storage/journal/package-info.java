/**
 * The diary of a running show: every event one line with a checksum, on the disk before anything else is done about it;
 * read again after a crash, whatever stands between its lines.
 */
@NullMarked
package crowdline.storage.journal;

import org.jspecify.annotations.NullMarked;
