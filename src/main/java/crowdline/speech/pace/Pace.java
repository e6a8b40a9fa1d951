package crowdline.speech.pace;

import crowdline.measure.EightInTen;
import crowdline.measure.Must;
import crowdline.show.figure.Translation;
import crowdline.speech.say.SpokenText;
import java.util.Locale;
import java.util.Objects;

/**
 * How fast one speaker says a remark:
 * {@code seconds = fixedS + perLetterS * letters + perCommaS * commas + perStopS * inner stops}, where the letters are
 * weighed by how long they sound ({@link SpokenText#soundedLetters}).
 *
 * @param name who, or what the values rest on; not blank
 * @param fixedS seconds that every remark costs, 0 to 5; without the breath after it
 * @param perLetterS seconds for one letter of the spoken text, above 0, up to 1
 * @param perCommaS seconds for one pause within a sentence, 0 to 5
 * @param perStopS seconds for one stop between sentences, 0 to 5
 * @param relativeError standard deviation of the relative error for one remark, 0 to 1
 */
public record Pace(
        String name, double fixedS, double perLetterS, double perCommaS, double perStopS, double relativeError) {

    /**
     * A speaker nobody has timed yet: 160 words a minute on commentary text, pauses included.
     *
     * <ul>
     *   <li>160 is the low end of the 160 to 180 words a minute recommended for radio (Rodero 2012, Text &amp; Talk 32(3),
     *       doi 10.1515/text-2012-0019). The low end, because loudspeakers over a field echo: common practice, no source.
     *       No published rate for public address was found.
     *   <li>Shape: a least-squares fit of letters, commas and stops to 30 commentary remarks spoken by a synthesiser (388
     *       words, 4.15 letters a word, 31 commas; espeak-ng 1.51 at 150): 0.032 s + 0.0694 s a letter + 0.254 s a comma +
     *       0.422 s a stop, final silence of 0.405 s included. A comma is 0.25 s (people: 511 ms at 44.7 % of commas, 0.23
     *       s). Of the fixed time 0.05 s remain without the final silence; three voices on 60 other remarks needed 0.15 to
     *       0.30 s, so 0.15 s (tuned).
     *   <li>Stops are people's: 734 ms at 94.2 % of full stops, 0.69 s (80 readers, Brigham Young University thesis
     *       etd-11313). Synthesisers pause too briefly there.
     *   <li>The letter then follows: the same 388 words as one text of 30 sentences take 388 / 160 minutes at 0.0731 s a
     *       letter.
     *   <li>Error: 11.1 % is how much one person varies on single sentences of 14 words (Altpeter and others 2015, doi
     *       10.1007/s00417-015-3065-4); 10 % is for not knowing the person (speakers at public talks 133 to 188 words a
     *       minute, mean 163, as tabled by Six Minutes). Together 15 %.
     * </ul>
     */
    public static final Pace DEFAULT = new Pace("default, 160 words a minute", 0.15, 0.0731, 0.25, 0.69, 0.15);

    private static final double LONGEST_PAUSE_S = 5;
    private static final double DIGIT_LETTERS = 5;

    public Pace {
        Objects.requireNonNull(name, "name");
        if (name.isBlank()) {
            throw new IllegalArgumentException("a pace needs the name of its speaker, but the name is blank");
        }
        Must.beWithin("fixedS", fixedS, 0, LONGEST_PAUSE_S);
        Must.beWithin("perLetterS", perLetterS, 0, 1);
        Must.beWithin("perCommaS", perCommaS, 0, LONGEST_PAUSE_S);
        Must.beWithin("perStopS", perStopS, 0, LONGEST_PAUSE_S);
        Must.beWithin("relativeError", relativeError, 0, 1);
        if (perLetterS == 0) {
            throw new IllegalArgumentException("perLetterS is 0, but a letter must take some time; 0.07 is usual");
        }
    }

    /**
     * How long this speaker takes.
     *
     * @return the time with its 80 % band (relative errors taken as log-normal, so the band never reaches 0);
     *     {@link SpokenTime#NONE} for a text without a letter
     */
    public SpokenTime time(SpokenText text) {
        double seconds = seconds(text);
        double factor = Math.exp(EightInTen.HALF_WIDTH * relativeError);
        return seconds == 0 ? SpokenTime.NONE : new SpokenTime(seconds, seconds / factor, seconds * factor);
    }

    /**
     * How long this speaker takes in another language: a letter takes what it takes against English where it was measured
     * ({@link LanguageRate}), a figure as much as five English letters (tuned: "nineteen thirty-six" is 17 for four), pauses as
     * in English. How fast this speaker is in that language nobody knows, so its readers' own deviation comes on top of the
     * error.
     */
    public SpokenTime time(Translation translation) {
        String text = translation.text();
        LanguageRate rate = LanguageRate.of(translation);
        double letters = rate.againstEnglish() * ForeignText.letters(text) + DIGIT_LETTERS * ForeignText.digits(text);
        if (letters == 0) {
            return SpokenTime.NONE;
        }
        double seconds = fixedS
                + perLetterS * letters
                + perCommaS * ForeignText.commas(text)
                + perStopS * ForeignText.innerStops(text);
        double factor = Math.exp(EightInTen.HALF_WIDTH * Math.hypot(relativeError, rate.relativeDeviation()));
        return new SpokenTime(seconds, seconds / factor, seconds * factor);
    }

    /** How far a remark may be from what is foretold, in a sentence for the speaker. */
    public String bandInWords() {
        double factor = Math.exp(EightInTen.HALF_WIDTH * relativeError);
        return String.format(
                Locale.UK,
                "8 of 10 remarks will take from %.0f%% less to %.0f%% more than predicted.",
                100 * (1 - 1 / factor),
                100 * (factor - 1));
    }

    double seconds(SpokenText text) {
        double letters = text.soundedLetters();
        if (letters == 0) {
            return 0;
        }
        return fixedS + perLetterS * letters + perCommaS * text.commas() + perStopS * text.innerStops();
    }
}
