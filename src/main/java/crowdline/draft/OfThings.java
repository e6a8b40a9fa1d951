package crowdline.draft;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts that begin as people write them about an aircraft, which begin with its name when they are said. */
final class OfThings {
    /** Done to a thing, and not by a person: "built in 1943" and not "built half of it". */
    private static final Pattern DONE = Pattern.compile(
            "((?:First |Originally )?(?:Re)?(?:[Bb]uilt|[Rr]estored|[Dd]esigned"
                    + "|[Dd]elivered|[Ii]mported|[Ff]ound)|First flown|Flown(?= by)) (?:in|by|as|at|for|from|between|after|near|on)\\b.*");

    private static final Pattern IS =
            Pattern.compile("(?:Powered|Painted|Owned|Registered|Named) (?:in|by|as|at|for|from|after|on|with)\\b.*");

    /** "It" and a verb of which a thing is the subject: "it is her first season" is none. */
    private static final Pattern IT =
            Pattern.compile("It (?=(?:has|had|can|could|weighs?|flies|flew|carries|carried|served"
                    + "|belongs|belonged|rolls|climbs|needs|burns|holds|still|once|first|never"
                    + "|(?:is|was) (?:built|made|restored|found|designed|delivered|flown|used|painted|powered|rebuilt|bought|sold"
                    + "|owned|named))\\b)");

    private static final Pattern ITS = Pattern.compile("Its (?=\\p{L})");

    private OfThings() {}

    /**
     * The fact as it is said of an aircraft; empty if it begins otherwise.
     *
     * @param called the aircraft, such as "the old trainer"
     * @param several whether that is more than one
     */
    static Optional<String> said(String fact, String called, boolean several) {
        String name = Sentences.begun(called);
        if (DONE.matcher(fact).matches()) {
            return Optional.of(name + (several ? " were " : " was ") + Sentences.within(fact));
        }
        if (IS.matcher(fact).matches()) {
            return Optional.of(name + (several ? " are " : " is ") + Sentences.within(fact));
        }
        for (Pattern begins : several ? List.<Pattern>of() : List.of(IT, ITS)) {
            Matcher matcher = begins.matcher(fact);
            if (matcher.lookingAt()) {
                return Optional.of(name + (begins == ITS ? "'s " : " ") + fact.substring(matcher.end()));
            }
        }
        return Optional.empty();
    }
}
