//! Where one bad pair explains the marks: are the settings beside it tried first, those that clear most before the others,
//! and then those through it?

use benchslate_core::machine::isolate::{Gearbox, Mark, explain, next};

#[test]
fn what_clears_most_beside_the_bad_pair_comes_first() {
    // 3 x 3 x 2; A1 B1 C1 runs badly, A2 B1 C1 well: A1 alone explains it
    let gearbox = Gearbox::by_steps(&[(3, 3), (3, 1), (2, 9)]).unwrap();
    let marks = [Mark::Noisy, Mark::Untested, Mark::Untested, Mark::Well];
    let finding = explain(&gearbox, &marks);
    let lead = finding.exact.first().unwrap();
    assert_eq!((finding.exact.len(), lead.causes.len()), (1, 1));
    let trials = next(&gearbox, &marks, &finding).trials;
    let rest: Vec<_> = trials.iter().filter(|trial| !trial.planned).collect();
    assert!(rest.len() > 6, "{rest:?}");
    let key = |setting: usize, clears: usize| {
        let through = lead.bad >> setting & 1 == 1;
        let clears = clears as i64;
        (through, if through { clears } else { -clears }, setting)
    };
    let keys: Vec<_> = rest
        .iter()
        .map(|trial| key(trial.setting, trial.clears))
        .collect();
    assert!(keys.is_sorted(), "{keys:?}");
    assert!(
        keys.windows(2).any(|two| two[0].1 != two[1].1),
        "all clear alike"
    );
}
