package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HindsightTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "That was five g.",
                "That was a loop of two hundred metres.",
                "That was nearly 200 miles an hour.",
                "And that was four rolls on one breath.",
                "Those were eight points, each a full stop.",
                "That took eleven seconds from top to bottom.",
                "That lasted as long as a traffic light.",
                "That covered three football pitches.",
                "That\u2019s it. That was the highest he goes today.",
                "There were four rolls in that line.",
                "There were six turns in that spin.",
                "There were almost five g on her at the bottom.",
                "He pulled five g at the bottom.",
                "He pulled five and a half g there.",
                "She reached 190 miles an hour in the dive.",
                "The aircraft dropped 600 feet in three seconds.",
                "It climbed 900 feet straight up.",
                "It was doing 210 knots at the bottom.",
                "They were pulling 4 g together.",
                "Rosa felt six times her own weight.",
                "Rosa Vent pushed three g the wrong way.",
                "The pilot weighed five times his weight.",
                "It fell 40 metres backwards.",
                "It turned 540 degrees before it flew again.",
                "She rolled four hundred degrees a second.",
                "It slowed to 40 knots over the top.",
                "He had five g on him all the way round.",
                "At the bottom he weighed five times his weight.",
                "At the top it was down to 60 knots.",
                "At its slowest it did 45 mph.",
                "On the way down it reached 200 knots.",
                "In that dive, she touched 220 knots.",
                "What you just saw is flown by very few.",
                "You have just heard an engine at full power.",
                "Did you see the nose drop?",
                "Watch his face. He pulled six g.",
                "The glider lost 300 feet in that turn.",
                "The machine hung for 3 seconds.",
                "It took nine seconds from entry to exit.",
                "It went up to 1,200 feet."
            })
    void ofWhatHasJustBeenFlown(String text) {
        assertThat(Hindsight.tellsOfTheFlight(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The Romans built a road here, 30 miles long.",
                "The Romans marched twenty miles a day along this ridge.",
                "He was a farmer.",
                "He was born two fields from here.",
                "She was born in 1981.",
                "She was a swimmer and a teacher.",
                "It was built in a shed.",
                "It was designed for a war that had ended.",
                "That was in 1958.",
                "That was before anybody had a radio.",
                "That was his grandfather's idea.",
                "That was why they built the second one.",
                "That was thirty years ago.",
                "There were only three of them built.",
                "There were four brothers, and all of them flew.",
                "There was a time when a loop was news.",
                "There was a windmill on that hill.",
                "She reached the final of the national championships.",
                "She turned forty in spring.",
                "He pulled pints for ten years.",
                "He fell three metres from a ladder as a boy.",
                "He climbed to 12,000 feet over the mountains in 1932.",
                "It flew first in 1955.",
                "It took two hundred hours to paint.",
                "It took ten years and every weekend.",
                "It took 20 seconds to start until they changed the magneto.",
                "It reached 400 mph in the war.",
                "It weighed seven hundred kilos when it was new.",
                "They lost the drawings in a flood.",
                "He lost ten feet of wing in a crash.",
                "He had three sisters.",
                "He had a shop in the high street.",
                "The airfield was a racecourse once.",
                "The engine was made for a tractor.",
                "At the top of his career he was paid in vegetables.",
                "Rosa came second.",
                "The pilot went to school here, five miles from the line.",
                "It is two hundred metres high.",
                "He pulls five g at the bottom.",
                "At the bottom he weighs five times his weight.",
                "That is five g.",
                "Watch the top: it is down to 60 knots.",
                "It was once flown upside down for 60 miles.",
                "Her first loop was 400 feet high, and her instructor was not amused."
            })
    void ofAnythingElse(String text) {
        assertThat(Hindsight.tellsOfTheFlight(text)).isFalse();
    }
}
