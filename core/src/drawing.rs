//! What does the answer look like? A drawing as data: object lines, centre lines and dimensions in the sheet's own
//! coordinates (x right, y up); whoever shows it chooses scale, pens and letters.

/// A point.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Up.
    pub y: f64,
}

/// A point.
pub const fn pt(x: f64, y: f64) -> Point {
    Point { x, y }
}

/// What a line stands for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Pen {
    /// The part itself: heavy.
    Object,
    /// Behind something: dashed.
    Hidden,
    /// A centre line: long and short dashes.
    Centre,
    /// A thin construction or extension line.
    Thin,
    /// The chosen or measured thing.
    Mark,
}

/// One element of a drawing.
#[derive(Clone, PartialEq, Debug)]
pub enum Shape {
    /// A run of straight lines.
    Path {
        /// Its corners.
        points: Vec<Point>,
        /// Back to the first.
        closed: bool,
        /// What it stands for.
        pen: Pen,
    },
    /// A circle.
    Circle {
        /// Its centre.
        centre: Point,
        /// Its radius.
        radius: f64,
        /// What it stands for.
        pen: Pen,
    },
    /// An arc, counter-clockwise, in degrees from the x axis.
    Arc {
        /// Its centre.
        centre: Point,
        /// Its radius.
        radius: f64,
        /// First end.
        from: f64,
        /// Second end.
        to: f64,
        /// What it stands for.
        pen: Pen,
    },
    /// A hatched, closed area: metal that is cut, or a tolerance zone.
    Hatch {
        /// Its corners.
        points: Vec<Point>,
    },
    /// A dimension between two points; the dimension line lies `steps` text heights off them, to the left of the way
    /// from `a` to `b` when positive.
    Dimension {
        /// First point.
        a: Point,
        /// Second point.
        b: Point,
        /// How far off, in text heights.
        steps: f64,
        /// The figure, as printed.
        text: String,
    },
    /// A word at a point, centred.
    Text {
        /// Where.
        at: Point,
        /// What.
        text: String,
    },
}

/// A drawing: its title says in words what it shows.
#[derive(Clone, PartialEq, Debug)]
pub struct Drawing {
    /// What it shows, in words, for those who can't see it.
    pub title: String,
    /// True proportions; else "not to scale" is said.
    pub to_scale: bool,
    /// Its elements.
    pub shapes: Vec<Shape>,
}

impl Drawing {
    /// An empty drawing.
    pub fn new(title: impl Into<String>, to_scale: bool) -> Self {
        Self {
            title: title.into(),
            to_scale,
            shapes: Vec::new(),
        }
    }
    /// Adds straight lines.
    pub fn path(&mut self, pen: Pen, closed: bool, points: &[Point]) -> &mut Self {
        self.shapes.push(Shape::Path {
            points: points.to_vec(),
            closed,
            pen,
        });
        self
    }
    /// Adds a circle.
    pub fn circle(&mut self, pen: Pen, centre: Point, radius: f64) -> &mut Self {
        self.shapes.push(Shape::Circle {
            centre,
            radius,
            pen,
        });
        self
    }
    /// Adds an arc.
    pub fn arc(&mut self, pen: Pen, centre: Point, radius: f64, from: f64, to: f64) -> &mut Self {
        self.shapes.push(Shape::Arc {
            centre,
            radius,
            from,
            to,
            pen,
        });
        self
    }
    /// Adds a hatched area.
    pub fn hatch(&mut self, points: &[Point]) -> &mut Self {
        self.shapes.push(Shape::Hatch {
            points: points.to_vec(),
        });
        self
    }
    /// Adds a dimension.
    pub fn dimension(
        &mut self,
        a: Point,
        b: Point,
        steps: f64,
        text: impl Into<String>,
    ) -> &mut Self {
        self.shapes.push(Shape::Dimension {
            a,
            b,
            steps,
            text: text.into(),
        });
        self
    }
    /// Adds a word.
    pub fn text(&mut self, at: Point, text: impl Into<String>) -> &mut Self {
        self.shapes.push(Shape::Text {
            at,
            text: text.into(),
        });
        self
    }
}
