package crowdline.speech.plain;

import crowdline.speech.say.QuantityRules;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds numbers that nobody in the crowd can picture and that are compared with nothing. */
final class NumberPictures {

    private static final Pattern PICTURES = Pattern.compile(
            "\\b(?:about the|as (?:\\p{L}+ ){1,3}as|like|times|twice|(?:half|double) (?:a|an|as|of|that|the|what|your)|enough|more than (?:a|an|the|your|any)"
                    + "|the (?:height|length|weight|width|size|power|speed) of|imagine|your|every second|compare"
                    + "|that's|that is|longer than|taller than|heavier than|faster than|higher than)\\b",
            Pattern.CASE_INSENSITIVE);

    /** Units a family has no feeling for, from any amount; the others from a thousand on. Common practice, no source. */
    private static final Pattern TECHNICAL_NUMBER = Pattern.compile("(?<![\\p{L}\\p{N}.,])" + QuantityRules.NUMBER
            + "[ -]?(?:hp|bhp|kW|horsepower|kilowatts?|rpm|revolutions|revs|kg|kilograms?|kilos|lbs?|tonnes?|kN|hPa|m/s"
            + "|kts?|knots|°/s|degrees a second|ft/min|feet a minute|kg/m²|newtons?)(?![\\p{L}\\p{N}])");

    private static final Pattern LARGE_NUMBER = Pattern.compile(
            "(?<![\\p{L}\\p{N}.,£$€])(?:\\d{1,3}(?:,\\d{3}){1,5}|\\d{4,})(?![\\p{L}\\p{N}]|[.,]\\d)(?!-\\d)");

    private static final Pattern YEAR = Pattern.compile("(?:1[0-9]|20)\\d\\d");

    private NumberPictures() {}

    static void check(String text, TextSpan sentence, TextSpan context, List<SpeechFinding> findings) {
        if (PICTURES.matcher(context.in(text)).find()) {
            return;
        }
        Set<Integer> seen = new HashSet<>();
        for (Pattern pattern : List.of(TECHNICAL_NUMBER, LARGE_NUMBER)) {
            Matcher matcher = pattern.matcher(text).region(sentence.fromChar(), sentence.toChar());
            while (matcher.find()) {
                boolean year = YEAR.matcher(matcher.group()).matches();
                if (!year && seen.add(matcher.start())) {
                    findings.add(new SpeechFinding(
                            PlainLanguage.NUMBER_WITHOUT_PICTURE,
                            "\"" + matcher.group()
                                    + "\" is hard to picture. Compare it with something the crowd knows.",
                            matcher.start(),
                            matcher.end(),
                            null));
                }
            }
        }
    }
}
