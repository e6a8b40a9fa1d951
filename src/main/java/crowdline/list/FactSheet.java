package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.List;
import java.util.regex.Pattern;

/** What stands under a heading of its own that tells, and is not flown: "Facts:", "About the pilot:", "A few things to say:". */
final class FactSheet {
    private static final Pattern HEAD = Pattern.compile("[\\s>*#_=\\-–—•\\[(]*"
            + "(?:(?:some|a few|a couple of|other|more|useful|fun|interesting|background|general|the|my|our|extra) )*"
            + "(?:facts?|trivia|bio|biography|background|career|history|information|about (?:me|myself|him|her|us|the (?:pilot|aircraft|aeroplane|airplane|plane|machine|team|act))"
            + "|pilot (?:facts?|bio|biography|profile|background|details)|aircraft (?:facts?|history|data|details)|talking points|points of interest|did you know|things (?:to|you (?:can|could|may|might)) (?:say|mention)"
            + "|facts? (?:about|on|for) [^:\\n]{2,40}|(?:notes|facts|words) for (?:the )?comment(?:ary|ators?))"
            + "\\s*[:?*\\])=_\\-–—]*\\s*");

    /** A sheet ends with the heading of a list, or with a list of as many figures. */
    private static final Pattern LIST = Pattern.compile(
            "[\\s>*#_=\\-–—•\\[(]*"
                    + "(?:(?:the|my|our|display|flying|aerobatic|figure) )*(?:list|sequence|programme|program|routine|figures|display|manoeuvres|maneuvers|schedule|order|profile)\\s*[:*\\])=_\\-–—]*\\s*");

    private static final int LEAST = 3;

    private final boolean[] told;

    private FactSheet(boolean[] told) {
        this.told = told;
    }

    /** The sheets of a text. */
    static FactSheet of(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        boolean[] told = new boolean[sentences.size()];
        boolean isSheet = false;
        for (int i = 0; i < told.length; i++) {
            String said = sentences.get(i).said(text);
            boolean isHead =
                    isWholeLine(text, sentences, i) && HEAD.matcher(said).matches();
            boolean isList = LIST.matcher(said).matches() || (sentences.get(i).followsGap(text) && begins(heard, i));
            isSheet = isHead || (isSheet && !isList);
            told[i] = isSheet;
        }
        return new FactSheet(told);
    }

    /** Whether a sentence is of one, its heading as well. */
    boolean has(int sentence) {
        return told[sentence];
    }

    private static boolean isWholeLine(Text text, List<Sentence> sentences, int i) {
        int end = sentences.get(i).end();
        int next = text.folded().indexOf('\n', end);
        return (i == 0 || sentences.get(i - 1).line() != sentences.get(i).line())
                && text.folded()
                        .substring(end, next < 0 ? text.folded().length() : next)
                        .isBlank();
    }

    /** Whether sentences begin here each of which is a figure. */
    private static boolean begins(List<List<Heard>> heard, int from) {
        int to = Math.min(heard.size(), from + LEAST);
        return to == from + LEAST
                && heard.subList(from, to).stream()
                        .allMatch(pieces -> pieces.get(0).isFigure()
                                && !Beside.isGuess(pieces.get(0))
                                && pieces.get(0).notUnderstood() == 0);
    }
}
