/**
 * A pilot's list of figures, read as people write it: in an e-mail, with numbers or bullets, one below the other or with
 * commas, out of a spreadsheet. Text goes in, a {@link crowdline.list.line.FigureList} comes out; nothing of the text is lost.
 *
 * <p>Left and right of places and headings are those of somebody who stands in front of the crowd and looks at the
 * display: "from the left" flies to the right. Left and right of a turn or roll are the pilot's.
 */
@NullMarked
package crowdline.list;

import org.jspecify.annotations.NullMarked;
