/** Help that explains the place it was asked for in, and can be searched. */
@NullMarked
package crowdline.console.help;

import org.jspecify.annotations.NullMarked;
