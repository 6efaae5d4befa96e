// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** A farm's day that is asked by questions alone: how it gets the answer to one is how it gets them all. */
public interface QuestionDay extends FarmDay {
    @Override
    <T> T get(Question<T> question);

    @Override
    default Brief brief() {
        return get(new Question.TheBrief(told()));
    }

    @Override
    default NitrogenOptions.Answer answer(Zone zone) {
        return get(new Question.TheAnswer(zone));
    }

    @Override
    default Outlook outlook(Zone zone) {
        return get(new Question.TheOutlook(zone));
    }

    @Override
    default Outlook outlookWith(Zone zone, Option option) {
        return get(new Question.TheOutlookWith(zone, option));
    }

    @Override
    default Week week(long seed) {
        return get(new Question.TheWeek(seed, told()));
    }
}
