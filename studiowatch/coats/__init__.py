"""The film: data sheets, drying, stages and ready times."""
