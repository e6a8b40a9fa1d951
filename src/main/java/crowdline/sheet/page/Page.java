package crowdline.sheet.page;

import crowdline.sheet.ink.Ink;
import java.util.List;
import java.util.stream.Stream;

/**
 * One page.
 *
 * @param ground rules, edges and cut marks, behind everything
 * @param blocks none over another
 */
public record Page(PaperSize size, List<Ink> ground, List<Block> blocks) {
    public Page {
        ground = List.copyOf(ground);
        blocks = List.copyOf(blocks);
    }

    /** Everything on it, from the hindmost to the foremost. */
    public List<Ink> inks() {
        return Stream.concat(ground.stream(), blocks.stream().flatMap(b -> b.inks().stream()))
                .toList();
    }
}
