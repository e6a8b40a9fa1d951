/** Acts and remarks as cells of a spreadsheet, looked at before they are taken. */
@NullMarked
package crowdline.console.prepare.cells;

import org.jspecify.annotations.NullMarked;
