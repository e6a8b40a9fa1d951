package crowdline.sheet.page;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is printed, or kept as a PDF, in one piece. */
public record Pages(String title, List<Page> pages, List<Bookmark> bookmarks) {
    private static final int MOST_NAMED = 12;

    public Pages {
        pages = List.copyOf(pages);
        bookmarks = List.copyOf(bookmarks);
    }

    /** These pages with others behind them. */
    public Pages with(Pages more) {
        List<Page> all = new ArrayList<>(pages);
        all.addAll(more.pages);
        List<Bookmark> marks = new ArrayList<>(bookmarks);
        more.bookmarks.forEach(b -> marks.add(new Bookmark(b.words(), b.page() + pages.size(), b.level())));
        return new Pages(title, all, marks);
    }

    /** Which letters no font has, in a sentence; empty if all are there. */
    public Optional<String> lacking() {
        NavigableSet<Integer> letters = new TreeSet<>();
        for (Page page : pages) {
            for (Ink ink : page.inks()) {
                if (ink instanceof Ink.Words words) {
                    words.text().codePoints().filter(Lettering::isLacking).forEach(letters::add);
                }
            }
        }
        if (letters.isEmpty()) {
            return Optional.empty();
        }
        String named = letters.stream()
                .limit(MOST_NAMED)
                .map(c -> String.format("%s (U+%04X)", Character.toString(c), c))
                .collect(Collectors.joining(", "));
        int more = letters.size() - MOST_NAMED;
        return Optional.of("the fonts for paper lack " + named + (more > 0 ? " and " + more + " more" : "")
                + "; a box (" + Lettering.LACKING
                + ") stands in place of each letter that is missing; write the name in"
                + " other letters as well");
    }
}
