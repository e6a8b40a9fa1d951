package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Lists for several days or shows in one text, each under a heading of its own: "Saturday", "Sunday (longer slot)". The first is
 * taken that is not only for reference; that there are others is said.
 */
final class Days {
    private static final String DAY = "(?:mon|tues|wednes|thurs|fri|satur|sun)days?|(?:mon|tue|wed|thu|fri|sat|sun)\\b";
    private static final String NUMBER = "(?:1|2|3|4|a|b|c|i|ii|iii|one|two|three|four)";
    private static final String SHOW =
            "(?:list|version|option|sequence|programme|program|display|show|routine|set|flight|slot|plan|variant|day)";
    private static final String WHICH =
            "(?:high|low|full|flat|rolling|short|long|wet|dry|fine|bad|good|normal|first|second|third|other|1st|2nd|3rd"
                    + "|morning|afternoon|evening|practice|rehearsal|press|main|reserve|alternative|alternate|poor|friday|saturday|sunday)";

    /** Ahead of a list, at the beginning of a line. */
    private static final Pattern HEAD = Pattern.compile("[\\s>*#_=\\-–—•\\[(]*(?:(?:for|on|the|and|my|our|this is) )*"
            + "(?:" + DAY + "|" + SHOW + " (?:no\\.? |nr\\.? |number |# ?)?" + NUMBER + "\\b|" + WHICH
            + "(?:[ -]weather)? " + SHOW + "\\b|"
            + WHICH
            + "[ -]weather\\b|tomorrow\\b|(?:low|high|thick|no|broken) clouds?\\b|(?:good|fine|bad|poor|wet|windy|full|flat|low|high|tall|middle|medium|short|rolling)(?=\\s*[:(])|(?:full|flat)(?=\\s*$)|plan [ab12]\\b|\\d{1,2}(?:st|nd|rd|th) (?:of )?(?:january|february|march|april|may|june|july|august|september|october|november|december)\\b)"
            + "(?<rest>[^\\n:]{0,48}?)\\s*(?<end>:|\\s[-–—]\\s|\\*{2}|[=\\-_]{2,}|$)");

    /** Of a list that nobody flies. */
    private static final Pattern REFERENCE = Pattern.compile(
            "\\b(?:(?:for|as) (?:your |a )?(?:reference|information|info|background|comparison|the record)|reference only"
                    + "|not (?:flown|today|tomorrow|this (?:time|year|weekend)|used|valid)|superseded|cancelled|old|out of date|obsolete)\\b");

    private static final Pattern DAYS = Pattern.compile(DAY);

    /** What is more tells something. */
    private static final int MOST_WORDS = 9;
    /** A list has as many figures. */
    private static final int LEAST = 3;

    private static final int LONGEST_QUOTE = 30;

    private final List<String> heads;
    private final Set<Integer> alone;
    private final String taken;
    /** Where the first begins, where that one does which is taken, and where the next does. */
    private final int first;

    private final int begin;
    private final int end;

    private Days(List<String> heads, Set<Integer> alone, String taken, int first, int begin, int end) {
        this.heads = heads;
        this.alone = alone;
        this.taken = taken;
        this.first = first;
        this.begin = begin;
        this.end = end;
    }

    /** The lists of a text; one if it has no more. */
    static Days of(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        List<Integer> begins = new ArrayList<>();
        List<String> heads = new ArrayList<>();
        int line = -1;
        for (int i = 0; i < sentences.size(); i++) {
            boolean isFirst = sentences.get(i).line() != line;
            line = sentences.get(i).line();
            boolean isLast =
                    text.piece(sentences.get(i).start(), sentences.get(i).end()).endsWith(":")
                            && text.folded().startsWith("\n", sentences.get(i).end());
            String head = isFirst || isLast ? head(text, sentences.get(i)) : "";
            if (!head.isEmpty()) {
                begins.add(i);
                heads.add(head);
            }
        }
        Set<Integer> alone = begins.stream()
                .filter(i -> heard.get(i).stream().noneMatch(Heard::isFigure))
                .collect(Collectors.toSet());
        List<Integer> lists = new ArrayList<>();
        for (int i = 0; i < begins.size(); i++) {
            int end = i + 1 < begins.size() ? begins.get(i + 1) : sentences.size();
            long figures = heard.subList(begins.get(i), end).stream()
                    .flatMap(List::stream)
                    .filter(Heard::isFigure)
                    .flatMap(piece -> piece.drafts().stream())
                    .count();
            if (figures >= LEAST) {
                lists.add(i);
            }
        }
        if (lists.size() < 2) {
            return new Days(List.of(), alone, "", 0, 0, sentences.size());
        }
        int taken = IntStream.range(0, lists.size())
                .filter(i -> !isForReference(text, sentences.get(begins.get(lists.get(i)))))
                .findFirst()
                .orElse(0);
        return new Days(
                lists.stream().map(heads::get).toList(),
                alone,
                heads.get(lists.get(taken)),
                begins.get(lists.get(0)),
                begins.get(lists.get(taken)),
                taken + 1 < lists.size() ? begins.get(lists.get(taken + 1)) : sentences.size());
    }

    /** "FULL (for reference)". */
    private static boolean isForReference(Text text, Sentence head) {
        return REFERENCE.matcher(head.said(text).lines().findFirst().orElse("")).find();
    }

    private static String head(Text text, Sentence sentence) {
        int begin = sentence.start();
        while (begin < sentence.end() && Character.isWhitespace(text.written().charAt(begin))) {
            begin++;
        }
        int end = text.folded().indexOf('\n', begin);
        end = end < 0 ? text.folded().length() : end;
        Matcher head = HEAD.matcher(text.folded()).region(begin, end);
        List<Word> words = head.lookingAt() ? text.words(begin, head.end()) : List.of();
        boolean isOfADay = head.lookingAt()
                && DAYS.matcher(head.group()).find()
                && head.group("end").startsWith(":");
        boolean isOne = !words.isEmpty()
                && words.size() <= MOST_WORDS
                && (isOfADay
                        || words.stream()
                                .noneMatch(word -> Manner.SENTENCE.has(word)
                                        && !word.plain().equals("below")));
        return isOne ? text.piece(begin, head.end()).replaceAll("^[#*=_\\s-]+|[#*=_:\\s–—-]+$", "") : "";
    }

    /** Whether a sentence belongs to a later list, or only heads one. */
    boolean isOther(int sentence) {
        return sentence >= end || (sentence >= first && sentence < begin) || alone.contains(sentence);
    }

    boolean areSeveral() {
        return !heads.isEmpty();
    }

    /** What to ask. */
    String question() {
        return "The text has " + heads.size() + " lists, "
                + heads.stream()
                        .limit(LEAST)
                        .map(head -> '"' + Written.brief(head, LONGEST_QUOTE) + '"')
                        .collect(Collectors.joining(" and "))
                + "; "
                + (begin == first ? "the first" : '"' + Written.brief(taken, LONGEST_QUOTE) + '"')
                + " was taken, so say which is flown, or paste that one alone";
    }
}
