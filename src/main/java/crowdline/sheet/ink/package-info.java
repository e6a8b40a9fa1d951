/** What is drawn, as data, and the one painter of it for screens, printers and files. */
@NullMarked
package crowdline.sheet.ink;

import org.jspecify.annotations.NullMarked;
