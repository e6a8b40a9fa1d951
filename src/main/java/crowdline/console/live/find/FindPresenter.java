package crowdline.console.live.find;

import crowdline.console.paint.Digits;
import crowdline.loaded.Found;
import java.util.List;
import java.util.stream.IntStream;

/** Decides what stands in the panel in which something is looked up. Pure. */
public final class FindPresenter {
    /** The keys that step the act while letters go to the panel. */
    static final String ACT_GOES_ON = "Page Down and Page Up step the act. Back: Esc";

    private FindPresenter() {}

    /**
     * What was found.
     *
     * @param words what was typed
     * @param found all of it, the best first
     * @param chosen which of those shown is open, from 0
     */
    public static FindView of(String words, List<Found> found, int chosen) {
        if (words.isBlank()) {
            return new FindView(
                    List.of(),
                    null,
                    "Type the first letters of a figure, a word, a name, an act or a fact. " + ACT_GOES_ON);
        }
        if (found.isEmpty()) {
            return new FindView(List.of(), null, "Nothing has that name. Fewer letters may find it. " + ACT_GOES_ON);
        }
        List<Found> shown = found.subList(0, Math.min(FindView.MOST, found.size()));
        int open = Math.min(chosen, shown.size() - 1);
        String more = found.size() > shown.size() ? found.size() - shown.size() + " more: type on. " : "";
        return new FindView(
                IntStream.range(0, shown.size())
                        .mapToObj(
                                i -> new FindView.Row(i + 1, kind(shown.get(i).kind()), label(shown.get(i)), i == open))
                        .toList(),
                page(shown.get(open)),
                more + Digits.upTo(shown.size(), "choose") + ". " + ACT_GOES_ON);
    }

    /** Many facts are about one thing, so each stands there with its own words. */
    private static String label(Found found) {
        return found.kind() == Found.Kind.FACT && !found.texts().isEmpty()
                ? found.texts().get(0)
                : found.name();
    }

    private static FindView.Page page(Found found) {
        return new FindView.Page(found.name(), found.sayIt(), String.join(" ", found.texts()));
    }

    private static String kind(Found.Kind kind) {
        return switch (kind) {
            case NAME -> "Name";
            case ACT -> "Act";
            case FIGURE -> "Figure";
            case WORD -> "Word";
            case FACT -> "Fact";
        };
    }
}
