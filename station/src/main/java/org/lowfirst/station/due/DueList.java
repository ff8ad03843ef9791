package org.lowfirst.station.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.station.rules.CylinderDate;
import org.lowfirst.station.rules.CylinderFacts;
import org.lowfirst.station.rules.RuleBook;

/**
 * Everything with a day it is good to, the earliest first.
 *
 * @param items in order of day, then kind, then subject
 */
public record DueList(List<DueItem> items) {

    private static final Comparator<DueItem> ORDER = Comparator.comparing(DueItem::lastDay)
            .thenComparing(DueItem::kind)
            .thenComparing(DueItem::subject)
            .thenComparing(DueItem::source);

    public DueList {
        items = items.stream().sorted(ORDER).toList();
    }

    /**
     * Collects what is known.
     *
     * @param cylinders whose days follow from the book; one whose months are not known has none
     */
    public static DueList of(
            List<CylinderFacts> cylinders,
            RuleBook book,
            List<Upkeep> equipment,
            List<CheckOut> people,
            LocalDate today) {
        List<DueItem> items = new ArrayList<>();
        for (CylinderFacts cylinder : cylinders) {
            for (CylinderDate date : CylinderDate.list(cylinder, book, today)) {
                DueKind kind = date.kind() == CylinderDate.Kind.TEST ? DueKind.CYLINDER_TEST : DueKind.CYLINDER_LIFE;
                items.add(new DueItem(
                        kind, cylinder.name(), date.lastDay(), date.rule().source()));
            }
        }
        equipment.forEach(piece -> items.add(piece.dueItem()));
        people.forEach(person -> items.add(person.dueItem()));
        return new DueList(items);
    }

    /**
     * What is past, and what has this many days left or fewer.
     *
     * @param days at least 0
     */
    public List<DueItem> within(int days, LocalDate today) {
        return items.stream().filter(item -> item.daysLeft(today) <= days).toList();
    }
}
