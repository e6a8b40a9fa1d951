package crowdline.sheet.page;

import crowdline.sheet.ink.Ink;
import java.util.List;

/**
 * Something on a page that nothing else may cover.
 *
 * @param name what it shows, such as {@code "remark r7"}; the parts of a text that goes on over the page have one name
 * @param area that it fills
 * @param inks it is drawn with
 */
public record Block(String name, Area area, List<Ink> inks) {
    public Block {
        inks = List.copyOf(inks);
    }

    public Block moved(double dx, double dy) {
        return new Block(
                name,
                area.moved(dx, dy),
                inks.stream().map(ink -> ink.moved(dx, dy)).toList());
    }
}
