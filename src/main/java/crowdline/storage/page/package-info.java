/** The glossary as one page for a browser. */
@NullMarked
package crowdline.storage.page;

import org.jspecify.annotations.NullMarked;
