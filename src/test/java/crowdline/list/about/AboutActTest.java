package crowdline.list.about;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.Aside;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AboutActTest {
    private static AboutAct of(String... notes) {
        return AboutAct.of(new FigureList(
                List.of(),
                Stream.of(notes).map(note -> new Aside(note, 0, List.of())).toList(),
                List.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "slot 15:20|15:20|",
                "For Saturday (slot 15.20, about 8 min) I'd like this|15:20|8",
                "Our slot is from 3.20 to 3.28 pm|15:20|8",
                "slot time: 1520-1530|15:20|10",
                "we are displaying at 11:05|11:05|",
                "my slot is 3 pm|15:00|",
                "Slot 9:30 am|09:30|",
                "on at 2.15|14:15|",
                "Display time 16:40|16:40|",
                "slot 3|| ",
                "Sunday 15:40|15:40|",
                "DISPLAY ITEM 6 - 1510 TO 1518|15:10|8",
                "3.20 pm would suit|15:20|",
                "We jump at 11:40|11:40|",
                "my slot is ten past four|16:10|",
                "Our slot: quarter to three|14:45|",
                "slot at three o'clock|15:00|",
                "jump run at 15:20|15:20|",
                "from 13:50 please|13:50|",
                "airfield opens at 9:30||",
                "gates from 10:00||",
                "briefing is at 10:30||",
                "briefing 10:00 to 10:20||",
                "take-off 15:12||",
                "slot 27:80||",
            })
    void slotIsReadAndNoOtherHour(String note, @Nullable LocalTime begins, @Nullable Double minutes) {
        assertThat(of(note).begins()).isEqualTo(begins);
        assertThat(of(note).minutes()).isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "whole thing 9 mins|9",
                "Helicopter solo 6 minutes:|6",
                "the routine lasts seven minutes|7",
                "A 12-minute display|12",
                "it takes 7.5 min|7.5",
                "about 8½ minutes|8.5",
                "9 min.|9",
                "we have 5 minutes,|5",
                "on at 15:30 for 10 minutes:|10",
                "All in, six and a half minutes|6.5",
                "on Saturday at 11:20, ten minutes|10",
                "Duration 8.|8",
                "Act length 7:30|7.5",
                "bout 6 mins|6",
                "briefing takes 20 minutes|",
                "I need 5 minutes before the slot|",
                "ring me in 5 minutes|",
                "the show is 90 minutes|",
                "Display box is 9 miles|",
                "See you. Fuel for 40 minutes. All of it takes 6 min.|6",
            })
    void lengthIsThatOfTheWhole(String note, @Nullable Double minutes) {
        assertThat(of(note).minutes()).isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Pilot: Ada Quillan|Ada Quillan",
                "Display pilot: Ada Quillan        Aircraft: biplane|Ada Quillan",
                "PIC: Ada Quillan|Ada Quillan",
                "crew: Capt. Ada Quillan|Ada Quillan",
                "Name: Ada Quillan|Ada Quillan",
                "Name is Ada Quillan.|Ada Quillan",
                "Flown by Wg Cdr (ret'd) Ada Quillan|Ada Quillan",
                "Pilots: Ada Quillan (lead) and Jory Penn (wing)|Ada Quillan and Jory Penn",
                "Trio, lead Ada Quillan|Ada Quillan",
                "Vintage glider: Ada Quillan in her two-seater|Ada Quillan",
                "Telephone call with Ada Quillan about Sunday|Ada Quillan",
                "Big twin, Wg Cdr Ada Quillan and two more|Ada Quillan",
                "Hey Ludo, Wenna here. Sunday:|Wenna",
                "ok so this is Wenna talking about Sunday|Wenna",
                "Hello again, it's Ludo. Here is the new list|Ludo",
                "Dear Wg Cdr Ada Quillan|",
                "Venue: Quillan Field|",
                "Sequence for display pilot K. Brandvold (two seat aerobatic)|K. Brandvold",
                "led by Petra Voss-Amery|Petra Voss-Amery",
                "whole thing 9 mins. led by Petra Voss-Amery, in the diamond|Petra Voss-Amery",
                "PILOT - J SELLICK|J Sellick",
                "Flown by Tom van der Hoeve|Tom van der Hoeve",
                "Hi, I'm Nell O'Grady and this is my list|Nell O'Grady",
                "I write on behalf of our member Miss Cordelia Vance, who will be flying it|Cordelia Vance",
                "Captain Alaric Boothroyd will be flying it|Alaric Boothroyd",
                "my name is Posy and his name is Wilf Garrity|Wilf Garrity",
                "Programme P. van Aalst, biplane|P. van Aalst",
                "Lead = Rook (me, Tamsin Yeo)|Tamsin Yeo",
                "Good morning. I'm Orlaith, flying the old trainer on Sunday|Orlaith",
                "My name is Benedikta.|Benedikta",
                "The Sandlarks - 4 ship|The Sandlarks",
                "The Dusk Herons (formation of three)|The Dusk Herons",
                "Helicopter solo, 6 mins, Bryony Lund|Bryony Lund",
                "Jet trainer solo, FO Lena Brax (28)|Lena Brax",
                "Fighter demo (Hugo Lindt):|Hugo Lindt",
                "Fighter demo (Saturday and Sunday):|",
                "\"Sunset\" 3 ship team - display card|Sunset",
                "Helicopter solo, 6 mins, Main Stage Display|",
                "The Plan - below|",
                "Pilot notes and Display Figures|",
                "Pilot Licence Number 123|",
                "the pilot will talk to you|",
                "Hi Joan Marsh,|",
            })
    void pilotIsWhoIsSaidToFly(String note, @Nullable String pilot) {
        assertThat(of(note).pilot()).isEqualTo(pilot);
    }

    @Test
    void whoSignsFliesIfTheLetterSaysI() {
        assertThat(of("I'd like to do this", "Cheers, Des Farrow").pilot()).isEqualTo("Des Farrow");
        assertThat(of("My list for Sunday", "Best wishes", "Des Farrow\n07700 900123")
                        .pilot())
                .isEqualTo("Des Farrow");
        assertThat(of("Hi Joan, thanks for having me, I fly at four", "Kind regards,\nDes Farrow")
                        .pilot())
                .isEqualTo("Des Farrow");
    }

    /** Whose the aeroplane is, or who watches, is no pilot. */
    @Test
    void whoOwnsItDoesNotFlyIt() {
        assertThat(of(
                                "I bring the old two-seater, which belongs to my daughter Helen, and I come in low.",
                                "All the best,\nMargaret Ollerby")
                        .pilot())
                .isEqualTo("Margaret Ollerby");
        assertThat(of("It belongs to my daughter Helen, who will be waving.", "All the best,\nMargaret Ollerby")
                        .pilot())
                .isEqualTo("Margaret Ollerby");
        assertThat(of("I'll be there with my husband Rufus Quill. I fly first.", "Regards,\nAda Quillan")
                        .pilot())
                .isEqualTo("Ada Quillan");
        assertThat(of("I send this for my brother Des Farrow", "Regards,\nAda Quillan")
                        .pilot())
                .isEqualTo("Des Farrow");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a wooden trainer from 1938|",
                "from 1940 to 1950 she was a trainer|19:40",
                "from 1530|15:30",
                "from 1940 hrs|19:40"
            })
    void aYearIsNoHour(String note, @Nullable LocalTime begins) {
        assertThat(of(note).begins()).isEqualTo(begins);
    }

    @Test
    void aLineWithNothingButANameSignsToo() {
        assertThat(of("I'd like to do this", "All good wishes, and save me a scone,\nBarnaby Thripp")
                        .pilot())
                .isEqualTo("Barnaby Thripp");
        assertThat(of("Here is my routine", "See ya there - Boone Tackett").pilot())
                .isEqualTo("Boone Tackett");
    }

    @Test
    void whoSignsFliesThoughTheLetterSaysNothingOfItself() {
        assertThat(of("List for Sunday", "Regards, Des Farrow").pilot()).isEqualTo("Des Farrow");
        assertThat(of("List for Sunday", "Cheers, Wenna").pilot()).isEqualTo("Wenna");
        assertThat(of("List for Sunday", "Wenna x").pilot()).isEqualTo("Wenna");
        assertThat(of("List for Sunday", "Regards, Des Farrow (club secretary)").pilot())
                .isNull();
    }

    @Test
    void whoSendsTheMessagesFlies() {
        assertThat(of("[18:02] Wenna: hi", "[18:03] Ludo: hello?", "[18:03] Wenna:", "[18:04] Wenna:")
                        .pilot())
                .isEqualTo("Wenna");
    }

    @Test
    void teamFliesWhereNobodyIsNamed() {
        assertThat(of("Display by \"Thistleseed\" parachute team").pilot()).isEqualTo("Thistleseed");
        assertThat(of("See below", "Thistleseed Parachute Team").pilot()).isEqualTo("Thistleseed Parachute Team");
    }

    @Test
    void aNameThatALineTookIsFound() {
        FigureList list = new FigureList(
                List.of(ListLine.of("Ada Quillan will land last", "landing", "landing", null, true, List.of())),
                List.of(new Aside("Team leader:", 0, List.of())),
                List.of());

        assertThat(AboutAct.of(list).pilot()).isEqualTo("Ada Quillan");
    }

    @Test
    void aSecretaryWhoSaysIDoesNotFly() {
        assertThat(of("I enclose her programme as she gave it to me", "Yours faithfully,\nEdmund Prewett")
                        .pilot())
                .isNull();
        assertThat(of("I send you what he flies", "he takes off and loops", "Regards, Ute Ammann")
                        .pilot())
                .isNull();
    }

    @Test
    void whoSignsForSomebodyElseDoesNotFly() {
        assertThat(of("Her list for Sunday", "Cheers, Des Farrow").pilot()).isNull();
        assertThat(of("I send you her list", "Pilot: Ada Quillan", "Cheers, Des Farrow")
                        .pilot())
                .isEqualTo("Ada Quillan");
    }

    /** The longest that is read: looked at again from each of its letters it would take half a minute, and at every key. */
    @Timeout(10)
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\n",
                " ",
                ".\n",
                "slot ",
                "Pilot Aa ",
                "thanks ",
                "9 min ",
                "Aa de ",
                "solo, Aa ",
                "The Aa (",
                "I'm Aa, "
            })
    void aLongLetterIsReadAtOnce(String again) {
        assertThat(of("x" + again.repeat(49_000 / again.length())).begins()).isNull();
    }

    @Test
    void letterThatSaysNothingOffersNothing() {
        assertThat(of()).isEqualTo(AboutAct.NOTHING);
        assertThat(of("Smoke is white", "see you at 10:30")).isEqualTo(AboutAct.NOTHING);
    }
}
