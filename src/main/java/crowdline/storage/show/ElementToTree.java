package crowdline.storage.show;

import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import crowdline.storage.json.ObjectKeys;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;

/** Elements as the keys of their objects. */
final class ElementToTree {
    private ElementToTree() {}

    static JsonNode node(Element element, Supplier<ObjectKeys> empty) {
        ObjectKeys keys = empty.get();
        if (element instanceof Element.Line line) {
            return full(line(line, keys, empty), element);
        }
        if (element instanceof Element.Arc arc) {
            return full(arc(arc, keys), element);
        }
        if (element instanceof Element.Roll roll) {
            return full(roll(roll, keys), element);
        }
        if (element instanceof Element.Reversal reversal) {
            return full(keys.text("do", "reversal").choice("way", ShowNames.REVERSAL_WAY, reversal.way()), element);
        }
        if (element instanceof Element.Flick flick) {
            keys.text("do", "flick")
                    .choice("kind", ShowNames.FLICK_KIND, flick.kind())
                    .number("degrees", flick.degrees());
            return full(side(keys, flick.toward()), element);
        }
        if (element instanceof Element.Spin spin) {
            keys.text("do", "spin")
                    .choice("kind", ShowNames.SPIN_KIND, spin.kind())
                    .number("turns", spin.turns());
            return none(side(keys, spin.toward()), element);
        }
        if (element instanceof Element.Pivot pivot) {
            return full(side(keys.text("do", "pivot"), pivot.toward()), element);
        }
        if (element instanceof Element.Slide slide) {
            return none(keys.text("do", "slide").choice("kind", ShowNames.SLIDE_KIND, slide.kind()), element);
        }
        if (element instanceof Element.HoverRoll hover) {
            return full(keys.text("do", "hover-roll").number("seconds", hover.seconds()), element);
        }
        if (element instanceof Element.Tumble tumble) {
            return full(side(keys.text("do", "tumble").number("turns", tumble.turns()), tumble.toward()), element);
        }
        if (element instanceof Element.Turn turn) {
            side(keys.text("do", "turn"), turn.toward())
                    .number("degrees", turn.degrees())
                    .number("bankDeg", turn.bankDeg())
                    .number("peakPathDeg", turn.peakPathDeg(), 0);
            if (turn.climbs()) {
                keys.node().put("climbs", true);
            }
            keys.number("rolls", turn.rolls(), 0);
            if (turn.endsBanked()) {
                keys.node().put("endsBanked", true);
            }
            return full(keys, element);
        }
        if (element instanceof Element.Run run) {
            keys.text("do", "run")
                    .number("alongM", run.alongM())
                    .number("awayM", run.awayM(), 0)
                    .number("heightFt", run.heightFt())
                    .number("kt", run.kt());
            return full(keys, element);
        }
        Element.Reposition back = (Element.Reposition) element;
        keys.text("do", "reposition")
                .number("alongM", back.alongM())
                .number("awayM", back.awayM(), 0)
                .number("heightFt", back.heightFt())
                .number("kt", back.kt())
                .number("bankDeg", back.bankDeg(), ElementFromTree.BANK_DEG);
        return full(keys, element);
    }

    private static ObjectKeys arc(Element.Arc arc, ObjectKeys keys) {
        keys.text("do", "arc")
                .choice("way", ShowNames.WAY, arc.way())
                .number("degrees", arc.degrees())
                .number("toPathDeg", arc.toPathDeg());
        String size = ElementFromTree.key(arc.size());
        switch (arc.size()) {
            case USUAL -> {}
            case TIGHTEST, CORNER, OVER -> keys.node().put(size, true);
            case LOAD_G, RADIUS_M, ROUND_FROM_G -> keys.number(size, arc.value());
        }
        return keys.number("topShare", arc.topShare(), ElementFromTree.ROUND);
    }

    private static ObjectKeys line(Element.Line line, ObjectKeys keys, Supplier<ObjectKeys> empty) {
        keys.text("do", "line");
        String until = ElementFromTree.key(line.until());
        if (line.until() == Element.Until.ENTRY_HEIGHT || line.until() == Element.Until.ENTRY_LINE) {
            keys.node().put(until, true);
        } else {
            keys.number(until, line.value());
        }
        if (!line.middle().isEmpty()) {
            keys.list("middle", line.middle(), true, turned -> node(turned, empty));
        }
        return keys;
    }

    private static ObjectKeys roll(Element.Roll roll, ObjectKeys keys) {
        keys.text("do", "roll")
                .choice("style", ShowNames.ROLL_STYLE, roll.style())
                .number("degrees", roll.degrees());
        return side(keys, roll.toward())
                .number("seconds", roll.seconds())
                .number("pointsPerTurn", roll.pointsPerTurn(), ElementFromTree.NO_POINTS)
                .number("pauseS", roll.pauseS(), ElementFromTree.PAUSE_S);
    }

    private static ObjectKeys side(ObjectKeys keys, Side toward) {
        return keys.choice("toward", ShowNames.SIDE, toward, Side.LEFT);
    }

    private static JsonNode full(ObjectKeys keys, Element element) {
        return keys.number("power", element.power(), ElementFromTree.FULL_POWER).node();
    }

    private static JsonNode none(ObjectKeys keys, Element element) {
        return keys.number("power", element.power(), ElementFromTree.NO_POWER).node();
    }
}
