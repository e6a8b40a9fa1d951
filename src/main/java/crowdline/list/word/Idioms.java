package crowdline.list.word;

import java.util.regex.Pattern;

/** Set phrases whose words mean something else alone: in "land in turn" nobody turns, the "tea break" breaks no formation, and what the tug turns to is its own. */
final class Idioms {
    private static final Pattern IDIOM = Pattern.compile(
            "(?<=\\btug |\\btug pilot |\\btug plane )(?:then )?(?:breaks?|peels?|dives?|banks?|turns?|rolls?)(?: off| away| down| clear)*(?: (?:to the )?(?:left|right))?\\b|\\b(?:(?<!nose[ -])in turn\\b|by turns\\b|(?:tea|lunch|coffee|comfort|short|half-?time) break\\b|(?:go(?:es|ing)? home |depart(?:s|ing)? |leav(?:es?|ing) )?without landing\\b|arriv(?:e|es|ing) (?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day(?: morning| afternoon| evening)?\\b|(?:thing of )?beauty\\b|(?<=[.!]\\s|\\n\\n)(?:right|ok|okay|anyway)[.!](?=\\s)|(?:which|it|this|that) turns (?=into )|jump (?=(?:ship|plane|aircraft|aeroplane|pilot)\\b\\s*:)|wing ?walk(?:ing|ers?)?\\b(?! wav)|and a bit(?= turns?\\b)|\\d{2,4} ?(?:yards?|yds?)\\b|half term\\b|(?:roll rate|rate of roll|(?:(?:it|she|he) )?rolls?(?: at)?)(?: of| is| about| over| some| around|:)* \\d{2,3} ?(?:deg\\w*|°) ?(?:/ ?s\\w*|(?:a|per|each) second)\\b|crossed[ -](?:up|controls?)\\b|controls crossed\\b|\\brun (?=everything\\b|it all\\b|on time\\b|late\\b|the (?:show|smoke|commentary|music|radio|clock)\\b)|bank holiday\\b|(?<!(?:turn|bank|roll|spin|break|the|to) )right (?=over |above |along |past |across |through |overhead |up to |down to |next to |by the |in the middle))");

    private Idioms() {}

    /** The text, as long as it was, with spaces in place of them. */
    static String without(String folded) {
        return IDIOM.matcher(folded)
                .replaceAll(found -> " ".repeat(found.group().length()));
    }
}
