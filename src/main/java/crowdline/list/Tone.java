package crowdline.list;

import crowdline.list.piece.Condition;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece.Parting;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells what belongs to a list from what is said around it. */
final class Tone {
    /** A sentence that says more of the like tells something. */
    private static final int MOST_TOLD_OF_A_CONDITION = 3;

    private Tone() {}

    /** Whether a sentence tells something rather than lists it, though it may name figures. */
    static boolean tells(Sentence sentence, List<Heard> pieces) {
        long words = pieces.stream().mapToLong(p -> p.words().size()).sum();
        if (sentence.numbered() && words < 15) {
            return false;
        }
        long open = pieces.stream().mapToLong(Heard::notUnderstood).sum();
        long told =
                pieces.stream().mapToLong(p -> Manner.SENTENCE.count(p.words())).sum();
        long doubts =
                pieces.stream().mapToLong(p -> Manner.DOUBT.count(p.words())).sum();
        long figures = pieces.stream().filter(Heard::isFigure).count();
        if (figures == 0) {
            return (told >= 1 && words >= 3) || open > 8;
        }
        if (figures == 1 && pieces.get(0).beginsWith(Manner.SOFT_DOUBT)) {
            return false;
        }
        boolean leads = pieces.get(0).drafts().get(0).leads();
        boolean leadsAfterACondition = Condition.isAll(pieces.get(0).words())
                && pieces.size() > 1
                && pieces.get(1).isFigure()
                && !Manner.SENTENCE.hasAny(pieces.get(1).words());
        if (leadsAfterACondition) {
            return false;
        }
        if (leads && told <= MOST_TOLD_OF_A_CONDITION && isOnCondition(pieces)) {
            return false;
        }
        long silent =
                pieces.stream().mapToLong(p -> Manner.FILLER.count(p.words())).sum();
        long understood = Math.max(0, words - open - silent);
        return (doubts >= 1 && doubts + told >= 2 && open >= 2 && (told >= 1 || !leads))
                || (told >= 1 && open >= 4 && open + told > understood)
                || open > 2 * understood + 4;
    }

    /** "Torque roll, if the engine is happy": it is in the list, whatever it depends on. */
    private static boolean isOnCondition(List<Heard> pieces) {
        List<Word> words =
                pieces.stream().flatMap(piece -> piece.words().stream()).toList();
        int condition = Condition.in(words, 0);
        return condition > 0
                && condition < words.size()
                && words.subList(0, condition).stream().noneMatch(Manner.DOUBT::has);
    }

    private static final Pattern OWN_TIME =
            Pattern.compile("(?s).*(?:[(\\[,:;=\\t|]|\\s[-–—])\\s*(?:for |about |approx\\.? |ca\\.? |~ ?)?"
                    + "(?:0?[0-6]:\\d{2}|\\d{1,3}(?:\\.\\d)? ?(?:s|secs?|seconds?|m|mins?|minutes?))[.)\\]\\s]*");

    private static final Set<String> WHOSE = Set.of("my", "our", "your", "his", "her", "their", "the");

    /** Whether a line that is no figure has a time set apart at its end, as something that is flown has. */
    static boolean isTimed(Sentence sentence, List<Heard> pieces, Text text) {
        List<Word> words = pieces.stream().flatMap(p -> p.words().stream()).toList();
        long told = words.stream()
                .filter(word -> Manner.SENTENCE.has(word) && !WHOSE.contains(word.plain()))
                .count();
        return words.size() <= 14
                && (told == 0 || sentence.numbered())
                && pieces.stream().noneMatch(p -> Manner.HEADING.hasAny(p.words()) || Manner.DOUBT.hasAny(p.words()))
                && !pieces.get(0).beginsWith(Manner.GREETING)
                && !pieces.get(0).beginsWith(Manner.PARTING)
                && OWN_TIME.matcher(text.folded().substring(sentence.start(), sentence.end()))
                        .matches();
    }

    private static final Pattern SET_PHRASE = Pattern.compile(
            "(?:nope\\b|i (?:said|wrote) .*\\d|(?:oops? |oh |ah |nah |no |wait |sorry |ps )*(?:i )?(?:nearly |almost )?forgot\\b|(?:straight |directly )?(?:out of|from|off) (?:that|it|thi|there)$|good (?:morning|afternoon|evening|day)|as"
                    + " (?:discussed|agreed|promised|requested|usual|ever|before)|all the best|see"
                    + " (?:you|ya)|(?:call|ring|text|phone) me|(?:speak|talk|call) (?:soon|to you|later|tomorrow|on"
                    + " |monday|tuesday|wednesday|thursday|friday|saturday|sunday)|take care|good luck|of course$|i think$|i hope$|i suppose$|i guess$|if i remember|have a |looking"
                    + " forward|look forward|let me know|any (?:question|problem)|(?:call|phone|radio) us"
                    + " |(?:spare|blank|tba|tbc|none|not used|unused|deleted|cancelled)(?:$| leave| was)|yours |with (?:kind|best|warm|friendly)|very best|happy to|many"
                    + " thanks|best wishes)\\b?.*");

    private static final Pattern LEAVE = Pattern.compile(
            "(?:all the best|(?:very )?best wish|with (?:kind|best|warm|friendly)|take care|yours|see (?:you|ya)\\b).*");

    /** "All the best": what follows is a name. */
    static boolean takesLeave(Heard piece) {
        return LEAVE.matcher(piece.said()).matches();
    }

    /** Whether a piece without a figure greets, takes leave, heads something, or tells something. */
    static boolean isAside(Heard piece, Sentence sentence) {
        List<Word> words = piece.words();
        if (piece.beginsWith(Manner.GREETING) || piece.beginsWith(Manner.PARTING)) {
            return words.size() <= 8;
        }
        if (SET_PHRASE.matcher(piece.said()).matches() || words.stream().anyMatch(Tone::isFrequency)) {
            return true;
        }
        boolean isAsked = piece.piece().parting() == Parting.LINE
                && words.size() > 1
                && words.get(words.size() - 1).plain().equals("please");
        if (isAsked && !Manner.FLOWN.hasAny(words)) {
            return true;
        }
        long told = Manner.SENTENCE.count(words);
        return !sentence.numbered() && (told >= 2 || (told == 1 && words.size() >= 4));
    }

    /** "Crew on 118.650": of the air band, 118 to 137 MHz (ICAO Annex 10, volume V, from memory). */
    private static boolean isFrequency(Word word) {
        Double number = word.number();
        return number != null && number >= 118 && number < 137 && number != Math.rint(number);
    }

    /** "I shall" of "I shall begin with a loop". */
    static boolean onlyTells(Heard piece) {
        return !piece.isSilent()
                && Manner.SENTENCE.hasAny(piece.words())
                && piece.words().stream().allMatch(word -> Manner.SENTENCE.has(word) || Manner.FILLER.has(word));
    }

    /** "Duration 9:40 brakes off to touchdown": how long all of it is. */
    private static final Pattern LENGTH = Pattern.compile(
            "total[\\s:=-]*\\d{1,2}[:.]\\d{2}\\b|(?:total|overall|whole|act|display|slot|our|my|the)?\\s*(?:duration|length|time)\\b[\\s:=-]*\\d"
                    + "|(?:start|starts|starting|begin|begins)\\b[\\s:=-]*(?:at )?\\d{1,2}[:.h]\\d{2}\\b|(?:flown|performed|presented) by\\b|(?:pilot|pic|commander|display pilot|jump ?(?:leader|master)|team (?:leader|captain))(?: is\\b|\\s*[:=-])");

    /** Whether a sentence without a figure heads what follows. */
    static boolean isHeading(List<Heard> pieces, Text text, Sentence sentence) {
        boolean isColon = sentence.written(text).endsWith(":");
        boolean figure = pieces.stream().anyMatch(Heard::isFigure);
        boolean named = pieces.stream().anyMatch(p -> Manner.HEADING.hasAny(p.words()));
        if (LENGTH.matcher(text.folded())
                .region(pieces.get(0).piece().from(), sentence.end())
                .lookingAt()) {
            return true;
        }
        boolean isFlown = Manner.FLOWN.hasAny(pieces.get(0).words());
        return figure ? isColon && named : isColon || (!sentence.numbered() && named && !isFlown);
    }

    /** Whether a sentence is the head of a table. */
    static boolean isTableHead(List<Heard> pieces) {
        return pieces.size() > 1
                && pieces.stream().flatMap(p -> p.words().stream()).allMatch(Manner.COLUMN::has);
    }
}
