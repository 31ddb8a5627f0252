//! Which words of the trade mean the same? The one table of the look-up: American and British, short and long.

/// A group a line. Words of a group are one word; `_` joins the words of a phrase. With `~` in front they only stand near
/// one another: the first finds the others, for less.
const TABLE: &str = "\
aluminum aluminium alu
gray grey
center centre centring centering
millimeter millimetre
meter metre
color colour
mold mould
vise vice
wrench spanner
hss high_speed_steel high_speed h.s.s
carbide tungsten_carbide tct
ream reamer
drill drilled
turn turned lathe_tool
horsepower hp bhp horse_power
rpm rev_per_minute revolution_per_minute
sfm sfpm fpm
tpi thread_per_inch
thou thousandth mil
micron micrometer micrometre um
rough roughness
gearbox gear_box
mesh engage
stopwatch stop_watch
crowfoot crow_foot crow_s_foot
antiseize anti_seize
oil lubricated lubed
end_mill endmill slot_drill
bush bushing
countersink csk countersunk
counterbore cbore spotface
dowel dowell
pulley sheave
change_gear change_wheel
half_nut split_nut clasp_nut
screwcut threading single_point
compound top_slide
part cutoff cut_off cutting_off parting_off
broken broke snapped snap break
worn wear wornout
climb down_milling
conventional up_milling
whitworth bsw
backlash slack lost_motion
stainless inox
free_machining leaded freecutting
identify recognise recognize
torque tightening_torque
heat hot heating
chill freeze
shrink shrunk
hole_pattern pattern
gage gauge
gib jib
~ spring_pin dowel pin
~ roll_pin dowel pin
~ spring dowel
~ form roll
~ roll form
~ cutter mill
~ arbor mandrel
~ mandrel arbor
~ feeler gauge thou
~ gap clearance
~ shim thou size
~ insert strip
~ helicoil strip insert
~ repair strip worn
~ coil insert
~ dp gear tooth
~ keyway fit
~ key fit taper
~ woodruff pin
~ bracket hole
~ stack tolerance limit
~ taper pin
~ sheet drill size
~ sine angle
~ hardness brinell
~ rockwell brinell
~ hrc brinell
~ weight size
~ heavy force
~ sling force torque
~ lift force
~ sealant threadlocker
~ gasket sealant
~ level dial
~ index hole
~ divide gear hole
~ circle hole
~ coordinate position
~ chatter speed
~ bolt screw
~ screw bolt
~ nut bolt
~ tight torque
~ tighten torque
~ loose fit
~ deep depth
~ long time length
~ wide width
~ thick thickness
~ fast speed
~ slow speed feed
~ noisy noise
~ tumbler change_gear
~ dividing gear
~ wheel gear
~ speed rpm
~ motor horsepower
~ convert length
~ equivalent length
~ fraction 64th 128th length
~ horsepower power motor
";

/// The groups: the words (phrases with `_`), and whether they are one word.
pub(super) fn groups() -> impl Iterator<Item = (bool, Vec<&'static str>)> {
    TABLE.lines().map(|line| match line.strip_prefix("~ ") {
        Some(near) => (false, near.split(' ').collect()),
        None => (true, line.split(' ').collect()),
    })
}
