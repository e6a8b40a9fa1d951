/** What was edited and is in no file of the user's yet, kept in the program's own folder until it is saved or given up. */
@NullMarked
package crowdline.storage.unsaved;

import org.jspecify.annotations.NullMarked;
