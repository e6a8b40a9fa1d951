package crowdline.list.line;

import crowdline.show.check.Finding;
import java.util.List;

/**
 * A list as it was read. Every word of the text stands in the {@link ListLine#text()} of one of the lines or in one of
 * the asides.
 *
 * @param lines what is flown, in order
 * @param asides what stands around it as it was written: greetings, headings, remarks to the commentator
 * @param findings what is wrong or doubtful; an error means that no act can be made of it. The path is empty, or names a
 *     line, such as {@code lines[3]}
 */
public record FigureList(List<ListLine> lines, List<Aside> asides, List<Finding> findings) {
    public FigureList {
        lines = List.copyOf(lines);
        asides = List.copyOf(asides);
        findings = List.copyOf(findings);
    }

    /** What stands around the lines, as it was written. */
    public List<String> notes() {
        return asides.stream().map(Aside::text).toList();
    }
}
