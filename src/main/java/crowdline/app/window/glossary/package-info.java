/** What the glossary is filled with, flown with and remembers. */
@NullMarked
package crowdline.app.window.glossary;

import org.jspecify.annotations.NullMarked;
