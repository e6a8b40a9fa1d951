package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Figures that are put in by name: "add a stall turn after the slow roll", "between the spin and the loop put in a roll". */
final class Insertions {
    private static final String PUT =
            "(?:add|added|adding|put in|putting in|insert|inserted|inserting|slip in|slipped in|squeeze in|squeezed in|fit in|fitted in)";
    /** Where it stands is flown too. */
    private static final String IS = "(?:there's|theres|there is|there are|comes|goes)";

    private static final String BETWEEN = "(?:in )?(?:between|btween|betwen)";
    private static final Pattern ANY = Text.across("\\b(?:" + PUT + "|" + BETWEEN + ")\\b");

    private static final String NEW = "(?:an? |the |my |one more |another )*(?<new>[^.,;:\\n]{3,40}?)";
    private static final String OLD = "(?:the |my |a )?(?<old>[^.,;:\\n]{3,40}?)";
    private static final String OTHER = " (?:and|&) (?:the |my |a )?(?<other>[^.,;:\\n]{3,40}?)";
    private static final String END = "(?=\\s*(?:[.,;:!\\n(]|$))";

    private static final List<Pattern> WAYS = List.of(
            Text.across("\\b" + PUT + " " + NEW
                    + " (?:straight |right |just |directly |immediately )?(?<way>after|before|behind|ahead of) " + OLD
                    + END),
            Text.across("\\b(?:straight |right |just |directly |immediately )?(?<way>after|before|behind|ahead of) "
                    + OLD + ",? (?:please |i |we |i've |we've |i'm |we're |i am |we are |they've |have |now ){0,3}"
                    + PUT + " " + NEW
                    + END),
            Text.across("\\b(?<way>" + BETWEEN + ") " + OLD
                    + OTHER + ",? (?:please |i |we |i've |we've |have |now |also ){0,3}(?:" + PUT + "|" + IS + ") "
                    + NEW
                    + END),
            Text.across("\\b" + PUT + " " + NEW + " (?<way>between) " + OLD + OTHER + END));

    /** The same below a list, where nothing else is flown: "a bunt straight after the half Cuban", "after the spin there's a roll". */
    private static final List<Pattern> BELOW = List.of(
            Text.across("\\b(?:and|yes|also|plus|one|a|an|another|then)\\b:? " + NEW
                    + " (?:straight |right |just |directly |immediately )?(?<way>after|before|ahead of) (?=(?:the|my) )"
                    + OLD
                    + END),
            Text.across("\\b(?<way>after|before) (?=(?:the|my) )" + OLD + ",? (?:" + IS
                    + "|i do|i fly|we do|we fly|he does|she does) " + NEW
                    + "(?=\\s*(?:[.,;:!\\n(]|$)| (?:or|because|as|since|so|to|too|now)\\b)"));

    private static final Pattern BESIDE = Text.across("\\b(?:after|before|ahead of) (?:the|my)\\b");

    private final Text text;
    private final String said;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final FlownIn flown;
    private final Reading reading;
    private final int listed;
    private final List<Consumer<List<Draft>>> changes = new ArrayList<>();

    Insertions(Text text, List<Sentence> sentences, List<List<Heard>> heard, FlownIn flown, Reading reading) {
        this.text = text;
        this.said = text.joined();
        this.sentences = sentences;
        this.heard = heard;
        this.flown = flown;
        this.reading = reading;
        this.listed = listed(sentences, heard);
    }

    /** Whether a sentence puts one figure beside another that is flown; then it is remembered. */
    boolean takes(int at) {
        Sentence sentence = sentences.get(at);
        return !Revisions.isPerhaps(text, sentence)
                && (takes(at, ANY, WAYS) || (at > listed && !sentence.numbered() && takes(at, BESIDE, BELOW)));
    }

    private boolean takes(int at, Pattern any, List<Pattern> ways) {
        Sentence sentence = sentences.get(at);
        boolean mayPut =
                any.matcher(said).region(sentence.start(), sentence.end()).find();
        for (Pattern way : mayPut ? ways : List.<Pattern>of()) {
            Matcher found = way.matcher(said).region(sentence.start(), sentence.end());
            if (found.find()) {
                return puts(found, at);
            }
        }
        return false;
    }

    /** Below which sentence nothing is listed: where a list with numbers or bullets has begun, or one has landed. */
    static int listed(List<Sentence> sentences, List<List<Heard>> heard) {
        int marked = 0;
        for (int i = 0; i < sentences.size(); i++) {
            boolean hasFigure = heard.get(i).stream().anyMatch(Heard::isFigure);
            boolean hasLanded = heard.get(i).stream()
                    .flatMap(piece -> piece.drafts().stream())
                    .anyMatch(draft -> draft.means("landing"));
            marked += hasFigure && sentences.get(i).numbered() ? 1 : 0;
            if (hasLanded || marked >= Style.LEAST_LINES) {
                return i;
            }
        }
        return sentences.size();
    }

    private boolean puts(Matcher found, int at) {
        Draft old = figure(found, "old");
        Draft put = figure(found, "new");
        if (old == null || put == null || !flown.isElsewhere(old, at) || isToldInOrder(old, at)) {
            return false;
        }
        boolean isBetween = found.group("way").matches(BETWEEN);
        Draft other = isBetween ? figure(found, "other") : null;
        boolean isAfter = isBetween || !List.of("before", "ahead of").contains(found.group("way"));
        saidBehind(found.end(), sentences.get(at).end()).forEach(put::take);
        changes.add(lines -> put(lines, put, old, other, isAfter));
        return true;
    }

    /** "A second stall turn, at the left end": what is said behind its name. */
    private List<Draft> saidBehind(int from, int to) {
        int begin = from;
        while (begin < to && !Character.isLetterOrDigit(said.charAt(begin))) {
            begin++;
        }
        List<Draft> behind = begin >= to ? List.of() : reading.read(begin, to);
        boolean isDetail = behind.size() == 1
                && !behind.get(0).isFigure()
                && (behind.get(0).saysOnly(Detail.PLACE) || behind.get(0).saysOnly(Detail.HEADING));
        behind.forEach(Draft::forgetNotes);
        return isDetail ? behind : List.of();
    }

    /** Of several, the one that the other follows is meant. */
    static void put(List<Draft> lines, Draft put, Draft old, @Nullable Draft other, boolean isAfter) {
        Draft meant = Exchanges.meant(lines, old);
        int place = meant == null ? -1 : lines.indexOf(meant);
        for (int i = 0; other != null && i + 1 < lines.size(); i++) {
            if (Exchanges.isSame(lines.get(i), old) && Exchanges.isSame(lines.get(i + 1), other)) {
                place = i;
            }
        }
        lines.add(place < 0 ? lines.size() : isAfter ? place + 1 : place, put);
    }

    /** "I fly a loop. After the loop I add a spin": it tells what comes next. */
    private boolean isToldInOrder(Draft old, int at) {
        if (at == 0 || heard.get(at - 1).isEmpty()) {
            return false;
        }
        List<Heard> before = heard.get(at - 1);
        List<Draft> last = before.get(before.size() - 1).drafts();
        return Exchanges.isSame(last.get(last.size() - 1), old);
    }

    private @Nullable Draft figure(Matcher found, String group) {
        return Exchanges.only(reading.read(found.start(group), found.end(group)));
    }

    /** Puts them in, in the order in which they were written. */
    void make(Assembly assembly) {
        changes.forEach(change -> change.accept(assembly.lines()));
    }
}
