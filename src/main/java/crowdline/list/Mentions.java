package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Figures that are only named to say where another stands: "it comes before the spin", "anything between the loop and the bump". */
final class Mentions {
    private static final Pattern AHEAD = Pattern.compile(
            "(?s).*\\b(?:before|after(?! that)|between|(?:smoke|on|white|red|blue|off),? (?:from|until|till|since|during)|out of|(?:apart|except|aside) (?:from|for)|in front of|ahead of|following|between the [^.\\n]{2,30} and) (?:the|that|my|his|her|our)"
                    + " (?:(?:first|last|second) )?");

    private static final Pattern BEFORE_IT = Pattern.compile(
            "(?s)(?:.*(?:[.,;:\\n]|\\b(?:and|but|so|then)))?\\s*(?:just |right |and |but )*before (?:the|that|my|his|her) ");

    private Mentions() {}

    /** Leaves out the drafts that only mention a figure; what is flown before one of them that came already goes there. */
    static List<Draft> leaveOut(List<Draft> drafts, Text text) {
        List<Draft> mentions = of(drafts, text);
        for (Draft mention : mentions) {
            int at = drafts.indexOf(mention);
            drafts.remove(at);
            int meant = 0;
            while (meant < at && !(isSame(drafts.get(meant), mention) && !mentions.contains(drafts.get(meant)))) {
                meant++;
            }
            if (meant < at - 1 && isBehindAtOnce(drafts.get(at - 1), mention, text)) {
                drafts.add(meant, drafts.remove(at - 1));
            } else if (at < drafts.size() && meant < at && isAheadAtOnce(mention, drafts.get(at), text)) {
                drafts.add(meant, drafts.remove(at));
            }
        }
        return mentions;
    }

    /** "Before the spin a barrel roll", "before the spin there is a barrel roll". */
    private static boolean isAheadAtOnce(Draft mention, Draft draft, Text text) {
        if (draft.name().isEmpty() || draft.name().get(0).start() < mention.start()) {
            return false;
        }
        int name = mention.name().get(0).start();
        int behind = mention.name().get(mention.name().size() - 1).end();
        return BEFORE_IT
                        .matcher(text.folded().substring(Math.max(0, name - 30), name))
                        .matches()
                && text.folded()
                        .substring(behind, draft.name().get(0).start())
                        .matches(
                                "(?:,|\\s|there's|there is|comes|i do|i fly|we do|we fly|i have|i put|is|an?|the|my)*");
    }

    /** "A barrel roll before the spin." */
    private static boolean isBehindAtOnce(Draft draft, Draft mention, Text text) {
        return !draft.name().isEmpty()
                && draft.name().get(draft.name().size() - 1).end()
                        <= mention.name().get(0).start()
                && text.folded()
                        .substring(
                                draft.name().get(draft.name().size() - 1).end(),
                                mention.name().get(0).start())
                        .strip()
                        .matches(
                                "(?s)(?:(?:on|at|to|the|left|right|l|r|end|side|hand),? ?)*(?:before|between the [^.\\n]{2,30} and) the(?: first| last| second)?");
    }

    /** The drafts that only mention a figure which another of them flies. */
    private static List<Draft> of(List<Draft> drafts, Text text) {
        List<Draft> mentions =
                drafts.stream().filter(draft -> isMention(draft, text)).toList();
        List<Draft> flown = new ArrayList<>(drafts);
        flown.removeAll(mentions);
        return mentions.stream()
                .filter(mention -> flown.stream().anyMatch(draft -> isSame(draft, mention) || isKindOf(draft, mention)))
                .toList();
    }

    private static boolean isSame(Draft draft, Draft mention) {
        Names.Sense sense = draft.sense();
        Names.Sense meant = mention.sense();
        return sense != null && meant != null && sense.figure().equals(meant.figure());
    }

    /** An inverted spin is a spin. */
    private static boolean isKindOf(Draft draft, Draft mention) {
        Names.Sense sense = draft.sense();
        Names.Sense meant = mention.sense();
        return sense != null && meant != null && sense.figure().endsWith(" " + meant.figure());
    }

    private static boolean isMention(Draft draft, Text text) {
        if (draft.name().isEmpty()) {
            return false;
        }
        int name = draft.name().get(0).start();
        int from = Math.max(0, name - 60);
        return AHEAD.matcher(text.folded()).region(from, name).matches();
    }
}
