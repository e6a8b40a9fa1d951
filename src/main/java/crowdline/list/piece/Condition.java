package crowdline.list.piece;

import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** What a figure depends on: "a vertical roll if she is feeling strong", "spin, if the cloud is above 3,000 ft". */
public final class Condition {
    private static final Set<String> IF =
            Set.of("if", "unless", "provided", "providing", "depend", "depends", "depending", "subject");

    private static final Set<String> DETAIL = Set.of(
            "turn",
            "rotation",
            "x",
            "time",
            "kt",
            "ft",
            "at",
            "from",
            "to",
            "the",
            "left",
            "right",
            "s",
            "min",
            "a",
            "with",
            "of",
            "only",
            "about");

    private static final Set<String> MAYBE = Set.of("maybe", "perhap", "possibly", "or");
    private static final Set<String> COUNTED =
            Set.of("even", "maybe", "perhap", "possibly", "turn", "rotation", "x", "time");

    private Condition() {}

    /** At which word it begins, from this one on; how many words there are if none does. */
    public static int in(List<Word> words, int from) {
        int at = from;
        while (at < words.size() && !IF.contains(words.get(at).plain())) {
            at++;
        }
        boolean isOnly =
                at < words.size() && at > from && words.get(at - 1).plain().equals("only");
        return isOnly ? at - 1 : at;
    }

    /** Whether it is all that these words say. */
    public static boolean isAll(List<Word> words) {
        return !words.isEmpty() && in(words, 0) == 0;
    }

    /** "Three turns if I am high enough": what stands ahead of it is said of the figure before. */
    public static boolean isBehindADetail(Heard heard) {
        int at = in(heard.words(), 0);
        return !heard.isFigure()
                && at > 0
                && at < heard.words().size()
                && heard.drafts().get(0).saysAnything()
                && heard.words().subList(0, at).stream()
                        .allMatch(word -> word.number() != null || DETAIL.contains(word.plain()));
    }

    /** "Perhaps four", behind "a spin, three turns": which of the two it is has to be asked. */
    public static boolean isAnotherCount(Heard heard) {
        List<Word> words = heard.words();
        return words.size() > 1
                && MAYBE.contains(words.get(0).plain())
                && words.stream().anyMatch(word -> word.number() != null)
                && words.subList(1, words.size()).stream()
                        .allMatch(word -> word.number() != null || COUNTED.contains(word.plain()));
    }

    /** Makes what is said in it no saying of the figure: the height of a cloud is not the figure's. */
    static void hide(List<Word> words, int from, List<String> plain) {
        for (int i = in(words, from); i < plain.size(); i++) {
            plain.set(i, "?");
        }
    }
}
