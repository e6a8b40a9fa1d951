package crowdline.storage.show;

import crowdline.show.Element;
import crowdline.show.Element.Side;
import crowdline.storage.json.ObjectKeys;
import tools.jackson.databind.JsonNode;

/** Elements as the keys of their objects. */
final class ElementToTree {
    private ElementToTree() {}

    static JsonNode node(Element element, ObjectKeys keys) {
        if (element instanceof Element.Line line) {
            keys.text("do", "line").number(ElementFromTree.key(line.until()), line.value());
            return full(keys, element);
        }
        if (element instanceof Element.Arc arc) {
            return full(arc(arc, keys), element);
        }
        if (element instanceof Element.Roll roll) {
            return full(roll(roll, keys), element);
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
                    .number("peakPathDeg", turn.peakPathDeg(), 0)
                    .number("rolls", turn.rolls(), 0);
            return full(keys, element);
        }
        Element.Reposition back = (Element.Reposition) element;
        keys.text("do", "reposition")
                .number("alongM", back.alongM())
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
        if (arc.size() == Element.Size.TIGHTEST) {
            keys.node().put(size, true);
            return keys;
        }
        return keys.number(size, arc.value());
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
