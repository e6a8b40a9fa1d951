/** What is typed into, chosen from and dragged on the pages of Prepare, whatever it stands for. */
@NullMarked
package crowdline.console.prepare.field;

import org.jspecify.annotations.NullMarked;
