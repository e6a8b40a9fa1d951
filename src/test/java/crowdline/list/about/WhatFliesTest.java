package crowdline.list.about;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.ListReader;
import crowdline.show.aircraft.Kind;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WhatFliesTest {
    private final ListReader reader = new ListReader(CatalogueFile.shipped());
    private final WhatFlies flies = new WhatFlies(KindsFile.shipped());

    private Optional<String> in(String letter) {
        return flies.in(reader.read(letter)).map(Kind::name);
    }

    @Test
    void aKindIsKnownByItsNameOrAnother() {
        assertThat(in("I fly a light aerobatic biplane, 180 hp.\nloop\nslow roll\nlanding"))
                .contains("light aerobatic biplane");
        assertThat(in("It is the sailplane again.\nloop\nslow roll")).contains("aerobatic glider");
        assertThat(in("We bring two Helicopters this year.\nhover\nbow")).contains("helicopter");
    }

    @Test
    void aFormationIsKnownByHowManyFly() {
        assertThat(in("Formation (4 light biplanes).\nloop\nslow roll")).contains("formation");
        assertThat(in("We come as a formation of three.\nloop\nslow roll")).contains("formation");
        assertThat(in("The formation will meet you.\nloop\nslow roll")).isEmpty();
        assertThat(in("We bring 5 yellow biplanes, leader Bo Landau.\nloop\nslow roll"))
                .contains("formation");
        assertThat(in("We are a pair of gliders.\nloop\nslow roll")).contains("formation");
    }

    @Test
    void theLongestNameCountsAlone() {
        assertThat(in("It is our jet trainer in its new colours.\nloop\nslow roll"))
                .contains("jet trainer");
    }

    @Test
    void whereTwoAreNamedOrNoneNobodyKnows() {
        assertThat(in("Not the glider this time, it is the old trainer.\nloop\nslow roll"))
                .isEmpty();
        assertThat(in("See you on Sunday.\nloop\nslow roll")).isEmpty();
        assertThat(in("My team will meet you.\nThe jetty is closed.\nloop\nslow roll"))
                .isEmpty();
        assertThat(in("")).isEmpty();
    }

    @Test
    void parachutistsStayThatWhateverBringsThemUp() {
        assertThat(in("We are six skydivers, dropped from a light aerobatic biplane.\nexit at 5000 ft\nlanding"))
                .contains("parachutists");
    }
}
