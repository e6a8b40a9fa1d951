package crowdline.list.piece;

import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Figures that are taken back as one goes on talking: "a slow roll no wait a barrel roll". */
final class Slips {
    /** Right behind a figure. */
    private static final Pattern BEHIND = Pattern.compile(
            "(?:oh )?(?:no wait|no sorry|sorry no|no no|no i mean|i mean|wait no|correction|(?:no |sorry |wait |er |um |oh )*(?:actually )?make (?:that|it)|no (?:actually|it's|that's|say|rather))\\b.*|(?:before |earlier |last year |once |in the past )?but (?:it's|it is|it|now|that's) ?(?:now|it's|i do|i fly)?(?: a| an| the)?|(?:i(?:'ve| have)? )?(?:took|taken|left) (?:it )?out\\b.*");

    /** Right ahead of one. */
    private static final Pattern AHEAD = Pattern.compile("(?:.* )?(?:no|not|not the|not a)");

    private static final Pattern USED_TO =
            Pattern.compile("(?:.* )?used to(?: (?:do|fly|have|be|finish|start|with|a|the))*");

    private Slips() {}

    /** The figures that are meant, of several in one breath; at least the last. */
    static List<Found> without(List<Word> words, List<Found> found) {
        List<Found> meant = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            int to = i + 1 < found.size() ? found.get(i + 1).from() : words.size();
            boolean isPast = i == 0
                    && USED_TO.matcher(plain(words, 0, found.get(0).from())).matches();
            boolean isDenied = i > 0
                    && AHEAD.matcher(plain(
                                    words, found.get(i - 1).to(), found.get(i).from()))
                            .matches();
            boolean isLast = i == found.size() - 1;
            boolean isTakenBack = !isLast
                    && BEHIND.matcher(plain(words, found.get(i).to(), to)).matches();
            if (!isPast && !isDenied && !isTakenBack) {
                meant.add(found.get(i));
            }
        }
        return meant.isEmpty() ? found : meant;
    }

    /** Where what is meant begins behind figures that were taken back: "a half Cuban no wait a full Cuban". */
    static int meantFrom(List<Word> words, List<Found> all, List<Found> meant) {
        int at = all.indexOf(meant.get(0));
        return at == 0
                ? 0
                : Between.cut(words, all.get(at - 1).to(), meant.get(0).from());
    }

    private static String plain(List<Word> words, int from, int to) {
        return words.subList(from, Math.max(from, to)).stream()
                .map(Word::plain)
                .filter(plain -> Character.isLetter(plain.charAt(0)))
                .collect(Collectors.joining(" "));
    }
}
