package crowdline.list;

import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.regex.Pattern;

/** Tells of a sentence behind the list that it says what is flown in other weather: "In low cloud: two passes and a wing-over". */
final class Weather {
    private static final String OTHER =
            "(?:low cloud|clouds?|(?:strong )?cross ?wind|cloud ?base|ceiling|overcast|(?:bad|poor|grey|gray|wet|low|other) (?:weather|day|wx)|weather|wx|rain"
                    + "|rains|raining|windy|wind|murk)";

    private static final Pattern AHEAD = Pattern.compile(
            "(?:[\\W\\d]|no\\. |(?:and|but|so|also|oh|now|well|ps|p\\. ?s)\\b)*(?:(?:if|when|should|in|on|by|for|with|below|under|at)\\b"
                    + "(?:[ \\w'()<>-]{0,30}?) )?(?:the |a |an |any |of )*" + OTHER + "\\b.*"
                    + "|(?:the |a |our |my )?(?:rolling|flat|low|limited|reduced|bad[- ]weather) (?:show|display|programme|routine)\\b(?! (?:starts|begins|is as follows)).*",
            Pattern.DOTALL);

    private static final Pattern ALLOWS = Pattern.compile(
            "\\b(?:allows?|allowing|permits?|permitting|good|fine|high enough|above|clear|holds|is kind|up to|but|otherwise|glorious)\\b");

    private static final int LONGEST = 200;

    private Weather() {}

    static boolean isOf(Text text, Sentence sentence) {
        String said = sentence.said(text);
        String begin = said.substring(0, Math.min(said.length(), LONGEST));
        return AHEAD.matcher(begin).matches() && !ALLOWS.matcher(begin).find();
    }
}
